package unthrum.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * Lets Ctrl-C end a search and not the program: what was found by then is still printed. Whoever closes it has printed.
 */
final class Interruption implements BooleanSupplier, AutoCloseable {

    /** A busy machine prints slowly; only a program that hangs is left to end without its answer. */
    private static final long PATIENCE_SECONDS = 300;

    private final CountDownLatch printed = new CountDownLatch(1);
    private volatile boolean asked;
    private final Thread hook = new Thread(() -> {
        asked = true;
        try {
            printed.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    });

    Interruption() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    @Override
    public boolean getAsBoolean() {
        return asked;
    }

    @Override
    public void close() {
        if (!asked) {
            Runtime.getRuntime().removeShutdownHook(hook);
        }
        printed.countDown();
    }
}
