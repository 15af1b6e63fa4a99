package curewindow.cli;

import curewindow.site.LoadedShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Option;

/** The option that names the shop folder. */
final class ShopOption {

  private final Clock clock;

  @Option(
      names = "--shop",
      paramLabel = "DIR",
      defaultValue = ".",
      description = "the shop folder; the current folder if left out")
  private Path folder;

  ShopOption(Clock clock) {
    this.clock = clock;
  }

  Path folder() {
    return folder;
  }

  LoadedShop load() throws IOException {
    refuseOthers();
    return LoadedShop.load(folder, clock);
  }

  /** Refuses what is no folder, and could not become one. */
  void refuseFiles() throws IOException {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new IOException(folder + " is not a folder; name the shop folder with --shop");
    }
  }

  /** Refuses what is no shop folder. */
  void refuseOthers() throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new IOException(folder + " is not a folder; name the shop folder with --shop");
    }
    if (!Files.exists(folder.resolve("shop.yaml"))) {
      throw new IOException(
          "there is no shop.yaml in "
              + folder
              + "; name the shop folder with --shop, or make one with new-shop");
    }
  }
}
