package trammel.judge;

import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.kie.api.runtime.KieSession;

/** Halts a session that does not come to an end. */
final class Watchdog implements AutoCloseable {
  private static final ScheduledThreadPoolExecutor TIMER = timer();

  private final AtomicBoolean bitten = new AtomicBoolean();
  private final ScheduledFuture<?> bite;

  private Watchdog(KieSession session, long patience) {
    this.bite =
        TIMER.schedule(
            () -> {
              bitten.set(true);
              session.halt();
            },
            patience,
            TimeUnit.MILLISECONDS);
  }

  private static ScheduledThreadPoolExecutor timer() {
    ScheduledThreadPoolExecutor timer =
        new ScheduledThreadPoolExecutor(
            1,
            task -> {
              Thread thread = new Thread(task, "rules watchdog");
              thread.setDaemon(true);
              return thread;
            });
    timer.setRemoveOnCancelPolicy(true);
    return timer;
  }

  /**
   * Watches a session until closed.
   *
   * @param patience how long it may take (ms)
   */
  static Watchdog over(KieSession session, long patience) {
    return new Watchdog(session, patience);
  }

  /** Whether it has halted the session. */
  boolean hasBitten() {
    return bitten.get();
  }

  @Override
  public void close() {
    bite.cancel(false);
  }
}
