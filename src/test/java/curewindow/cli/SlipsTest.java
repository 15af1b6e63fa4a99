package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A slip of the pen is answered by one line, and by exit code 2, as the README has it. */
final class SlipsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "pres | there is no command pres; did you mean press? See 'curewindow --help'",
        "help car | there is no command car; did you mean card? See 'curewindow --help'",
        "card | name one or more jobs, or a day with --pickup; see 'curewindow card --help'",
        "card --pikup=1 | card has no option --pikup; did you mean --pickup?"
            + " See 'curewindow card --help'",
        "card -pickup 1 | card has no option -pickup; did you mean --pickup?"
            + " See 'curewindow card --help'",
        "check --zzzzzzzzz | check has no option --zzzzzzzzz; see 'curewindow check --help'",
        "press extra | press can do nothing with \"extra\"; see 'curewindow press --help'",
        "why | missing required parameter: 'JOB'; see 'curewindow why --help'",
        "card --out | missing required parameter for option '--out' (FILE);"
            + " see 'curewindow card --help'",
        "desk --port x | invalid value for option '--port': 'x' is not a whole number;"
            + " see 'curewindow desk --help'",
        "questions --outcome x | missing required argument(s): --asked=JOB;"
            + " see 'curewindow questions --help'",
        "places near 91 3 | LAT is 91, outside -90 to 90; see 'curewindow places near --help'",
        "card Q-3101 --shop content/demo --explain --as walet | --as takes wallet, wallet-inch,"
            + " hang-tag, window-up, care-a5, care-letter, label-62, label-4x6, label-small, not \"walet\"; did you mean wallet?"
            + " See 'curewindow card --help'"
      })
  void oneLineSaysWhatIsMeantAndWhereToLook(String typed, String line) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Curewindow.run(
            Clock.systemUTC(),
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            typed.split(" "));
    assertEquals(line, err.toString().strip());
    assertEquals("", out.toString());
    assertEquals(2, code);
  }
}
