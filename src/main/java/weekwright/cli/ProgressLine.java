package weekwright.cli;

import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import weekwright.engine.simulate.Progress;

/** A progress bar on standard error, for a terminal alone and for work of over a second. */
final class ProgressLine implements Progress, AutoCloseable {
    private static final long SECOND_NANOS = 1_000_000_000L;
    private static final int COLUMNS = 80;

    private final Terminal terminal;
    private final String unit;
    private final int all;
    private final long began = System.nanoTime();
    private ProgressBar bar;

    ProgressLine(Terminal terminal, String unit, int all) {
        this.terminal = terminal;
        this.unit = unit;
        this.all = all;
    }

    @Override
    public synchronized boolean done(int count) {
        if (bar == null && terminal.interactive() && System.nanoTime() - began > SECOND_NANOS) {
            bar = new ProgressBarBuilder()
                    .setInitialMax(all)
                    .setTaskName(unit)
                    .setStyle(ProgressBarStyle.ASCII)
                    .setConsumer(new ConsoleProgressBarConsumer(terminal.err(), COLUMNS))
                    .build();
        }
        if (bar != null) {
            bar.stepTo(count);
        }
        return true;
    }

    @Override
    public void close() {
        stop();
    }

    /** Takes the bar away; more than once does no harm. */
    synchronized void stop() {
        if (bar != null) {
            bar.close();
            bar = null;
        }
    }
}
