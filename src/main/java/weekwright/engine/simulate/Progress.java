package weekwright.engine.simulate;

/** Told now and then how far the trials are; called by several threads, one at a time. */
@FunctionalInterface
public interface Progress {
    /** Lets every simulation run to its end. */
    Progress NONE = trials -> true;

    /**
     * So many trials are done.
     *
     * @return false to stop: the simulation then throws {@link Stopped}
     */
    boolean done(int trials);
}
