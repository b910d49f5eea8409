package pourwright.work;

import java.time.Instant;

/**
 * What was typed into a form and not kept yet.
 *
 * @param device on which device it was typed: a name that tells it from others and nothing else
 * @param form the address the form is sent to, such as {@code /stockroom/delivery}
 * @param requestKey the request by which the form will be kept
 * @param typed the fields as the page wrote them, 1 to {@link KeepDrafts#TYPED_MAX} characters
 * @param at when it was saved
 */
public record Draft(String device, String form, String requestKey, String typed, Instant at) {}
