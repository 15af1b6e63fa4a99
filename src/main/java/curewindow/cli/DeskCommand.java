package curewindow.cli;

import curewindow.desk.Desk;
import curewindow.handout.CodeLevel;
import curewindow.handout.QrCode;
import curewindow.site.ShopSetUp;
import java.io.IOException;
import java.io.PrintWriter;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "desk",
    description =
        "Opens the counter's screens in a browser: hand a car over, look one up, see who needs a"
            + " call. Where there is no shop yet, it sets one up.",
    mixinStandardHelpOptions = true)
final class DeskCommand implements Callable<Integer> {

  /** Easy to type on a tablet, and mistaken for nothing else. */
  private static final String SIGNS = "abcdefghjkmnpqrstuvwxyz23456789";

  private static final int LENGTH = 8;

  private final Clock clock;

  @Mixin private ShopOption shop;
  @Mixin private OutOption out;
  @Spec private CommandSpec spec;

  @Option(
      names = "--port",
      defaultValue = "8018",
      description = "the port; ${DEFAULT-VALUE} if left out, 0 for any free one")
  private int port;

  @Option(
      names = "--network",
      description =
          "lets in other machines of the shop's network, such as tablets, that type the passcode"
              + " printed here")
  private boolean network;

  DeskCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    if (port < 0 || port > 65535) {
      throw new IOException("port " + port + " is not within 0 to 65535");
    }
    shop.refuseFiles();
    Optional<String> passcode = network ? Optional.of(passcode()) : Optional.empty();
    Desk.Setting setting = new Desk.Setting(shop.folder(), out.path(), port, passcode, clock);
    try (Desk desk = Desk.open(setting)) {
      PrintWriter lines = spec.commandLine().getOut();
      lines.println("The desk:  " + desk.address());
      passcode.ifPresent(
          code -> {
            desk.others().forEach(a -> lines.println("On a tablet:  " + a));
            lines.println("Passcode:  " + code);
            desk.others().stream().findFirst().ifPresent(a -> print(a.toString(), lines));
          });
      if (ShopSetUp.isNeeded(shop.folder())) {
        lines.println("There is no shop in " + shop.folder() + " yet; the desk sets one up.");
      }
      lines.println("Open it in a browser here; stop with Ctrl+C.");
      lines.flush();
      Thread.currentThread().join();
    }
    return Exit.OK;
  }

  /** A code to scan off a terminal, two rows of modules in one row of letters. */
  private static void print(String address, PrintWriter lines) {
    QrCode code = QrCode.of(address, CodeLevel.L).orElseThrow();
    int last = code.modules() + QrCode.QUIET_ZONE;
    for (int y = -QrCode.QUIET_ZONE; y < last; y += 2) {
      StringBuilder line = new StringBuilder();
      for (int x = -QrCode.QUIET_ZONE; x < last; x++) {
        boolean upper = !code.dark(x, y);
        boolean lower = !code.dark(x, y + 1);
        line.append(upper ? lower ? '\u2588' : '\u2580' : lower ? '\u2584' : ' ');
      }
      lines.println(line);
    }
  }

  private static String passcode() {
    SecureRandom random = new SecureRandom();
    StringBuilder code = new StringBuilder();
    for (int i = 0; i < LENGTH; i++) {
      code.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
    }
    return code.toString();
  }
}
