package curewindow.why;

import curewindow.cure.Account;
import curewindow.cure.CureCase;
import curewindow.page.JobView;
import curewindow.words.Words;
import java.util.Objects;
import java.util.function.Function;

/**
 * What an explanation is made from.
 *
 * @param view the job with its dates, after what is tried
 * @param curing what the dates were computed from
 * @param english the words of the shop's side, whatever the customer's language
 * @param accounts how the end of a hold comes about, by the hold's id
 * @param trial what is tried instead of what the files say
 */
public record Grounds(
    JobView view, CureCase curing, Words english, Function<String, Account> accounts, Trial trial) {

  /** Refuses missing parts. */
  public Grounds {
    Objects.requireNonNull(view, "view");
    Objects.requireNonNull(curing, "curing");
    Objects.requireNonNull(english, "english");
    Objects.requireNonNull(accounts, "accounts");
    Objects.requireNonNull(trial, "trial");
  }
}
