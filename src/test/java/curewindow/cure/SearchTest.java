package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SearchTest {

  @Test
  void findsTheFirstFromAnyGuess() {
    for (int last = 3; last < 40; last++) {
      for (int turn = 3; turn <= last; turn++) {
        for (int guess = 0; guess < 45; guess++) {
          int found = turn;
          for (int step = 1; step < 7; step++) {
            assertEquals(found, Search.first(3, last, guess, step, hour -> hour >= found));
          }
        }
      }
    }
  }

  @Test
  void asksLittleNearAGoodGuess() {
    int[] asked = {0};
    int found =
        Search.first(
            0,
            8760,
            1000,
            2,
            hour -> {
              asked[0]++;
              return hour >= 1003;
            });
    assertEquals(1003, found);
    assertTrue(asked[0] <= 6, "asked " + asked[0] + " times");
  }
}
