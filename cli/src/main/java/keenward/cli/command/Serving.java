package keenward.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import keenward.web.Workbench;

/** Serves the workbench and says where. */
final class Serving {

  private static final int MOST_PORT = 65_535;

  private Serving() {}

  static int serve(Surroundings surroundings, List<Path> sites, int port) {
    if (port < 0 || port > MOST_PORT) {
      surroundings
          .err()
          .println("--port: " + port + " is no port; expected 1 to 65535, or 0 for a free one");
      return Exit.BAD_INPUT;
    }
    Workbench workbench;
    try {
      workbench = Workbench.start(sites, surroundings.keenward(), surroundings.clock(), port);
    } catch (RuntimeException failure) {
      surroundings
          .err()
          .println(
              "--port: port "
                  + port
                  + " cannot be opened; name another one, or none for a free one");
      return Exit.BAD_INPUT;
    }
    CountDownLatch stopped = new CountDownLatch(1);
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(() -> {
              workbench.close();
              stopped.countDown();
            }));
    surroundings.out().println("\nThe workbench is at " + workbench.address());
    surroundings.out().println("Open it in a browser on this machine; Control-C stops it.");
    surroundings.out().flush();
    try {
      stopped.await();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
    return Exit.FINE;
  }
}
