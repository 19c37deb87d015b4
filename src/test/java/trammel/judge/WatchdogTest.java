package trammel.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Proxy;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.kie.api.runtime.KieSession;

/** Sessions without end are halted, and no others. */
class WatchdogTest {
  private static final int ROUND = 5;

  private final Watchdog watchdog = new Watchdog(ROUND);
  private final CountDownLatch halted = new CountDownLatch(1);

  /** A session of which nothing is asked but that it halt. */
  private final KieSession session =
      (KieSession)
          Proxy.newProxyInstance(
              KieSession.class.getClassLoader(),
              new Class<?>[] {KieSession.class},
              (proxy, method, arguments) -> {
                if (method.getName().equals("halt")) {
                  halted.countDown();
                  return null;
                }
                return method.getName().equals("hashCode")
                    ? System.identityHashCode(proxy)
                    : proxy == arguments[0];
              });

  @Test
  void aSessionThatOutlastsItsPatienceIsHalted() throws InterruptedException {
    try (Watchdog.Watch watch = watchdog.over(session, 3)) {
      assertThat(halted.await(1, TimeUnit.MINUTES)).isTrue();
      assertThat(watch.hasBitten()).isTrue();
    }
  }

  @Test
  void aSessionThatEndsInTimeIsLeftAlone() throws InterruptedException {
    for (int i = 0; i < 20; i++) {
      try (Watchdog.Watch watch = watchdog.over(session, 100)) {
        assertThat(watch.hasBitten()).isFalse();
      }
    }
    assertThat(halted.await(300 * ROUND, TimeUnit.MILLISECONDS)).isFalse();
  }

  @Test
  void itGoesOutAgainAfterARest() throws InterruptedException {
    watchdog.over(session, 1000).close();
    TimeUnit.MILLISECONDS.sleep(4 * ROUND);
    aSessionThatOutlastsItsPatienceIsHalted();
  }
}
