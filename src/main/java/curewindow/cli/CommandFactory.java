package curewindow.cli;

import java.time.Clock;
import picocli.CommandLine;

/** Makes the commands and options, and hands the clock to those that ask what time it is. */
final class CommandFactory implements CommandLine.IFactory {

  private final CommandLine.IFactory usual = CommandLine.defaultFactory();
  private final Clock clock;

  CommandFactory(Clock clock) {
    this.clock = clock;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    if (type == ShopOption.class) {
      return type.cast(new ShopOption(clock));
    }
    if (type == AtOption.class) {
      return type.cast(new AtOption(clock));
    }
    if (type == PressCommand.class) {
      return type.cast(new PressCommand(clock));
    }
    if (type == CardCommand.class) {
      return type.cast(new CardCommand(clock));
    }
    if (type == RecordsOption.class) {
      return type.cast(new RecordsOption(clock));
    }
    if (type == ImportCommand.class) {
      return type.cast(new ImportCommand(clock));
    }
    if (type == RestoreCommand.class) {
      return type.cast(new RestoreCommand(clock));
    }
    if (type == DeskCommand.class) {
      return type.cast(new DeskCommand(clock));
    }
    if (type == QuestionsCommand.class) {
      return type.cast(new QuestionsCommand(clock));
    }
    return type == PlacesCommand.class ? type.cast(new PlacesCommand(clock)) : usual.create(type);
  }
}
