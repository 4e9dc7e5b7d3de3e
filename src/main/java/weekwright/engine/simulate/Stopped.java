package weekwright.engine.simulate;

/** A simulation was stopped by its {@link Progress}; what it had computed is lost. */
public final class Stopped extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Stopped after so many trials. */
    public Stopped(int done, int trials) {
        super("The simulation was stopped after " + done + " of " + trials + " trials.");
    }
}
