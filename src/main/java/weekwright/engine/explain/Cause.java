package weekwright.engine.explain;

/** Why a forecast differs from an earlier one. The order is that of the bits of a mixture. */
public enum Cause {
    /** Days have passed; hours were logged, tasks and episodes went on or were done. */
    WORK,
    /** Hours, pieces, failures and story are estimated otherwise. */
    ESTIMATES,
    /** Tasks, links, crew, days off, equipment, the crew's own week, slots and settings. */
    PLAN,
    /** What is to be bought, at which price, and what was ordered and has come. */
    MATERIALS,
    /** Supporters, pledge levels, the balance and what comes again. */
    MONEY
}
