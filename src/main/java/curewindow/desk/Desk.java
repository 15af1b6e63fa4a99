package curewindow.desk;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * The counter's screens on a shop folder, for browsers on this machine, and on others in the shop
 * where a passcode is set.
 */
public final class Desk implements AutoCloseable {

  /** How often all files of the folder are looked at, milliseconds. */
  private static final long OFTEN = 1000;

  /** Where that takes long, it is done so much more seldom that the machine has time for others. */
  private static final long SHARE = 10;

  private final DeskShop desk;
  private final Screens screens;
  private final DeskServer server;
  private final ScheduledExecutorService watch =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "shop folder");
            thread.setDaemon(true);
            return thread;
          });

  /**
   * Where and for whom.
   *
   * @param shop the shop folder
   * @param out the output folder of presses
   * @param port the port, 0 for any free one
   * @param passcode what others in the shop's network have to type; empty where only this machine
   *     may come in
   * @param clock tells what time it is
   */
  public record Setting(Path shop, Path out, int port, Optional<String> passcode, Clock clock) {}

  private Desk(Setting setting) throws IOException {
    this.desk = new DeskShop(setting.shop(), setting.out(), setting.clock());
    this.screens = new Screens(desk, setting);
    SecureRandom random = new SecureRandom();
    Optional<Gate> gate =
        setting
            .passcode()
            .map(
                code ->
                    new Gate(
                        code,
                        setting.clock(),
                        () -> {
                          byte[] bytes = new byte[16];
                          random.nextBytes(bytes);
                          return bytes;
                        }));
    InetSocketAddress at =
        gate.isPresent()
            ? new InetSocketAddress(setting.port())
            : new InetSocketAddress(InetAddress.getLoopbackAddress(), setting.port());
    this.server = new DeskServer(at, OwnNames.all(gate.isPresent()), gate, screens);
  }

  /**
   * Opens the desk.
   *
   * @param setting where and for whom
   * @return the desk, which answers from now on
   * @throws IOException where the port is taken; the message is for the user
   */
  public static Desk open(Setting setting) throws IOException {
    Desk desk = new Desk(setting);
    desk.screens.warmSearch();
    desk.server.start();
    desk.watch.execute(desk.screens::warmUp);
    desk.watch.schedule(desk::look, OFTEN, TimeUnit.MILLISECONDS);
    return desk;
  }

  private void look() {
    long began = System.nanoTime();
    try {
      desk.look();
    } catch (RuntimeException e) {
      // The folder is away for a moment, as a disk in the network may be; it is looked at again.
    }
    long took = (System.nanoTime() - began) / 1_000_000;
    try {
      watch.schedule(this::look, Math.max(OFTEN, SHARE * took), TimeUnit.MILLISECONDS);
    } catch (RejectedExecutionException e) {
      // The desk was closed meanwhile.
    }
  }

  /**
   * Where the desk is for this machine.
   *
   * @return an address, ending in a slash
   */
  public URI address() {
    return URI.create("http://127.0.0.1:" + server.port() + "/");
  }

  /**
   * Where the desk is for others in the shop's network.
   *
   * @return addresses, each ending in a slash
   */
  public List<URI> others() {
    return OwnNames.inNetwork().stream()
        .map(name -> URI.create("http://" + name + ":" + server.port() + "/"))
        .toList();
  }

  @Override
  public void close() {
    watch.shutdownNow();
    server.close();
    screens.close();
  }
}
