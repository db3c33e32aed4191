package rimeward.app;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.locks.LockSupport;

/** Lets a signal end the loop in order, and the program with 0. */
final class OrderlyEnd {
    private final CountDownLatch reached = new CountDownLatch(1);

    private OrderlyEnd() {}

    /** @param stop asks the loop, which runs on this thread, to end */
    static OrderlyEnd of(Thread loop, Runnable stop) {
        OrderlyEnd end = new OrderlyEnd();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> end.onSignal(loop, stop), "stop"));
        return end;
    }

    /** The loop is over and everything is left as it should be. */
    void reached() {
        reached.countDown();
    }

    private void onSignal(Thread loop, Runnable stop) {
        if (reached.getCount() == 0) {
            return; // it ended by itself, with its own exit code
        }
        stop.run();
        LockSupport.unpark(loop);
        try {
            reached.await();
        } catch (InterruptedException e) {
            return;
        }
        Runtime.getRuntime().halt(0); // a signal's own code would read as a failure
    }
}
