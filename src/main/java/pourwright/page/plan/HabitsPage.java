package pourwright.page.plan;

import pourwright.page.Form;

/**
 * What the plan reckons with.
 *
 * @param form what was typed
 */
public record HabitsPage(Form form) {}
