package trammel.judge;

import java.util.Set;
import java.util.Timer;
import java.util.TimerTask;
import java.util.concurrent.ConcurrentHashMap;
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
  private final Timer timer = new Timer("rules watchdog", true);
  private final long round;

  /**
   * @param round the time between two rounds (ms)
   */
  Watchdog(long round) {
    this.round = round;
  }

  /** A session being watched, until closed. */
  final class Watch implements AutoCloseable {
    private final KieSession session;
    private int left;
    private volatile boolean bitten;

    private Watch(KieSession session, int patience) {
      this.session = session;
      this.left = patience;
    }

    private void pass() {
      if (left-- == 0) {
        bitten = true;
        session.halt();
      }
    }

    /** Whether the session was halted. */
    boolean hasBitten() {
      return bitten;
    }

    @Override
    public void close() {
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
      timer.schedule(
          new TimerTask() {
            @Override
            public void run() {
              makeRound();
            }
          },
          round);
    }
  }

  private void makeRound() {
    watches.forEach(Watch::pass);
    onRounds.set(false);
    if (!watches.isEmpty()) {
      goOut();
    }
  }
}
