package trammel.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Proxy;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.kie.api.runtime.KieSession;

/** Sessions without end are halted, and no others. */
class WatchdogTest {
  private static final long NEVER = TimeUnit.DAYS.toMillis(1);

  private final CountDownLatch halted = new CountDownLatch(1);

  /** A session of which nothing is asked but that it halt. */
  private final KieSession session =
      (KieSession)
          Proxy.newProxyInstance(
              KieSession.class.getClassLoader(),
              new Class<?>[] {KieSession.class},
              (proxy, method, arguments) -> {
                assertThat(method.getName()).isEqualTo("halt");
                halted.countDown();
                return null;
              });

  @Test
  void aSessionIsHaltedWhenItsPatienceIsAtAnEndAndNotBefore() {
    Watchdog watchdog = new Watchdog(NEVER);
    try (Watchdog.Watch watch = watchdog.over(session, 3)) {
      for (int round = 0; round < 3; round++) {
        watchdog.makeRound();
        assertThat(watch.hasBitten()).isFalse();
      }
      assertThat(halted.getCount()).isOne();
      watchdog.makeRound();
      assertThat(watch.hasBitten()).isTrue();
      assertThat(halted.getCount()).isZero();
    }
  }

  @Test
  void aSessionThatHasEndedIsLeftAlone() {
    Watchdog watchdog = new Watchdog(NEVER);
    Watchdog.Watch ended = watchdog.over(session, 3);
    watchdog.makeRound();
    ended.close();
    for (int round = 0; round < 10; round++) {
      watchdog.makeRound();
    }
    assertThat(ended.hasBitten()).isFalse();
    assertThat(halted.getCount()).isOne();
  }

  @Test
  void itGoesOutByItselfAndAgainAfterARest() throws InterruptedException {
    Watchdog watchdog = new Watchdog(5);
    watchdog.over(session, 1000).close();
    TimeUnit.MILLISECONDS.sleep(50);
    Watchdog.Watch watch = watchdog.over(session, 3);
    assertThat(halted.await(1, TimeUnit.MINUTES)).isTrue();
    assertThat(watch.hasBitten()).isTrue();
    watch.close();
  }
}
