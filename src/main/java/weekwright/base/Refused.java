package weekwright.base;

/**
 * A text or value that breaks a rule. Carries the two halves of the sentence that a person reads: the rule that was
 * broken ("is not hours") and the remedy ("write 3.5 or 3:30"). Whoever knows the place turns it into a {@link Problem}.
 */
public final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    private final String rule;
    private final String remedy;

    public Refused(String rule, String remedy) {
        super(rule + "; " + remedy, null, false, false);
        this.rule = rule;
        this.remedy = remedy;
    }

    public String rule() {
        return rule;
    }

    public String remedy() {
        return remedy;
    }
}
