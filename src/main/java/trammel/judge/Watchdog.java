package trammel.judge;

import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.kie.api.runtime.KieSession;

/**
 * Halts sessions that do not come to an end. It makes its rounds only while some session is watched
 * and counts rounds, not hours: a process that was stopped for long is not taken for a session that
 * ran for long.
 */
final class Watchdog {
  private final Set<Watch> watches = ConcurrentHashMap.newKeySet();
  private final AtomicBoolean onRounds = new AtomicBoolean();
  private final Executor later;

  /**
   * @param round the time between two rounds (ms)
   */
  Watchdog(long round) {
    // On the timer's own thread: workers may all be busy with a session that does not end.
    later = CompletableFuture.delayedExecutor(round, TimeUnit.MILLISECONDS, Runnable::run);
  }

  /** A session being watched, until closed. */
  final class Watch implements AutoCloseable {
    private final KieSession session;
    private int left;
    private boolean closed;
    private boolean bitten;

    private Watch(KieSession session, int patience) {
      this.session = session;
      this.left = patience;
    }

    private synchronized void pass() {
      if (!closed && left-- == 0) {
        bitten = true;
        session.halt();
      }
    }

    /** Whether the session was halted. */
    synchronized boolean hasBitten() {
      return bitten;
    }

    /** Lets the session go: whoever has it next is not halted for this one's sake. */
    @Override
    public synchronized void close() {
      closed = true;
      watches.remove(this);
    }
  }

  /**
   * Watches a session.
   *
   * @param patience rounds that it may take, besides the one that is under way
   */
  Watch over(KieSession session, int patience) {
    Watch watch = new Watch(session, patience);
    watches.add(watch);
    goOut();
    return watch;
  }

  private void goOut() {
    if (onRounds.compareAndSet(false, true)) {
      later.execute(this::makeRound);
    }
  }

  /**
   * Passes every session; another round follows while any is watched, whatever one of them does.
   */
  void makeRound() {
    try {
      watches.forEach(Watch::pass);
    } finally {
      onRounds.set(false);
      if (!watches.isEmpty()) {
        goOut();
      }
    }
  }
}
