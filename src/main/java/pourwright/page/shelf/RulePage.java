package pourwright.page.shelf;

import pourwright.page.Form;

/** Her rule of proof, to be changed. */
public record RulePage(Form form) {}
