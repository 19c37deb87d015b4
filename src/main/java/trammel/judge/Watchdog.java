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

  /** Passes every session; another round follows while any is watched. */
  void makeRound() {
    watches.forEach(Watch::pass);
    onRounds.set(false);
    if (!watches.isEmpty()) {
      goOut();
    }
  }
}
