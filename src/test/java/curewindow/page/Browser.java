package curewindow.page;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * A real browser, without a window, for tests: with a clock, a time zone and a screen of the test's
 * choice. Where no Chromium is installed the calling test is skipped, and says so; with {@code
 * CUREWINDOW_REQUIRE_BROWSER} set in the environment it fails instead.
 */
public final class Browser implements AutoCloseable {

  private static final List<Path> BROWSERS =
      List.of(Path.of("/usr/bin/chromium"), Path.of("/usr/bin/google-chrome"));
  private static final List<Path> DRIVERS =
      List.of(Path.of("/usr/bin/chromedriver"), Path.of("/usr/lib/chromium/chromedriver"));

  /** Its notes on the browser's version say nothing of the pages. */
  private static final Logger NOTES = Logger.getLogger("org.openqa.selenium");

  private final Path profile;
  private final ChromeDriver driver;
  private String clockScript = "";

  private Browser(Path browser, Path chromedriver) {
    try {
      profile = Files.createTempDirectory("browser-profile");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    NOTES.setLevel(Level.SEVERE);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(browser.toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--no-first-run",
        "--hide-scrollbars",
        "--user-data-dir=" + profile);
    options.setCapability("goog:loggingPrefs", Map.of("browser", "ALL", "performance", "ALL"));
    System.setProperty("webdriver.chrome.driver", chromedriver.toString());
    driver = new ChromeDriver(options);
    driver.manage().timeouts().pageLoadTimeout(Duration.ofSeconds(60));
  }

  /** A new browser; the calling test is skipped, or fails, where there is none. */
  public static Browser open() {
    Optional<Path> browser = BROWSERS.stream().filter(Files::isExecutable).findFirst();
    Optional<Path> chromedriver = DRIVERS.stream().filter(Files::isExecutable).findFirst();
    boolean there = browser.isPresent() && chromedriver.isPresent();
    String message = "no Chromium with its driver is installed, so the browser tests do not run";
    if (!there && System.getenv("CUREWINDOW_REQUIRE_BROWSER") != null) {
      Assertions.fail(message + ", though CUREWINDOW_REQUIRE_BROWSER asks for them");
    }
    Assumptions.assumeTrue(there, "Skipped: " + message);
    return new Browser(browser.get(), chromedriver.get());
  }

  /** The time zone that the phone is set to, such as {@code Asia/Tokyo}. */
  public Browser zone(String zone) {
    driver.executeCdpCommand("Emulation.setTimezoneOverride", Map.of("timezoneId", zone));
    return this;
  }

  /** Whether pages may run scripts. */
  public Browser scripts(boolean allowed) {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !allowed));
    return this;
  }

  /** What the clock says in pages opened from now on; {@link #later} moves it on. */
  public Browser clock(Instant now) {
    trueClock();
    String source =
        "(function(){var at="
            + now.toEpochMilli()
            + ",Real=Date;window.__later=function(ms){at+=ms};"
            + "Date.now=function(){return at};"
            + "window.Date=new Proxy(Real,{construct:function(t,a){"
            + "return a.length?new t(...a):new t(at)},apply:function(){return new Real(at)+''}})})()";
    clockScript =
        (String)
            driver
                .executeCdpCommand(
                    "Page.addScriptToEvaluateOnNewDocument", Map.of("source", source))
                .get("identifier");
    return this;
  }

  /** The machine's own clock again, in pages opened from now on. */
  public Browser trueClock() {
    if (!clockScript.isEmpty()) {
      driver.executeCdpCommand(
          "Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", clockScript));
      clockScript = "";
    }
    return this;
  }

  /** Lets time pass in the open page, without loading it again. */
  public void later(Duration passed) {
    driver.executeScript(
        "__later(arguments[0]);document.dispatchEvent(new Event('visibilitychange'))",
        passed.toMillis());
  }

  /** The size of the screen in CSS pixels, and whether it is a phone's. */
  public Browser screen(int width, int height, boolean phone) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 2, "mobile", phone));
    return this;
  }

  /** A preference such as {@code prefers-color-scheme}, {@code dark}. */
  public Browser prefers(String feature, String value) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", feature, "value", value))));
    return this;
  }

  /** Shows pages by their style for paper, with dark colors preferred, until something is. */
  public Browser onPaper() {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            "print",
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", "dark"))));
    return this;
  }

  /** Opens a file. */
  public Browser go(Path file) {
    driver.get(file.toUri().toString());
    return this;
  }

  /** Opens an address. */
  public Browser go(String address) {
    driver.get(address);
    return this;
  }

  /**
   * Presses and lets go of a key, as a person does.
   *
   * @param key its name, such as {@code Tab} or {@code Enter}, or a letter
   * @param code its number among virtual keys; 9 is Tab, 13 is Enter
   */
  public Browser key(String key, int code) {
    Map<String, Object> press =
        Map.of(
            "key",
            key,
            "code",
            key,
            "windowsVirtualKeyCode",
            code,
            "text",
            code == 13 ? "\r" : key.length() == 1 ? key : "");
    for (String type : List.of("keyDown", "keyUp")) {
      Map<String, Object> event = new HashMap<>(press);
      event.put("type", type);
      driver.executeCdpCommand("Input.dispatchKeyEvent", event);
    }
    return this;
  }

  /** Clicks on the first element that can be seen, as a mouse does. */
  public Browser click(String css) {
    shown(css).click();
    return this;
  }

  /** Types into the first element that can be seen, in place of what stands there. */
  public Browser type(String css, String text) {
    WebElement field = shown(css);
    field.clear();
    field.sendKeys(text);
    return this;
  }

  /** Types where the keys are, such as {@code Keys.TAB}. */
  public Browser keys(CharSequence... keys) {
    driver.switchTo().activeElement().sendKeys(keys);
    return this;
  }

  /** Touches the middle of the first element that can be seen, as a finger does. */
  public Browser tap(String css) {
    List<?> at =
        (List<?>)
            driver.executeScript(
                "arguments[0].scrollIntoView({block:'center'});var r=arguments[0]"
                    + ".getBoundingClientRect();return [r.x+r.width/2,r.y+r.height/2]",
                shown(css));
    driver.executeCdpCommand(
        "Input.dispatchTouchEvent",
        Map.of(
            "type", "touchStart", "touchPoints", List.of(Map.of("x", at.get(0), "y", at.get(1)))));
    driver.executeCdpCommand(
        "Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
    return this;
  }

  private WebElement shown(String css) {
    return driver.findElements(By.cssSelector(css)).stream()
        .filter(WebElement::isDisplayed)
        .findFirst()
        .orElseThrow(() -> new AssertionError("nothing can be seen of " + css));
  }

  /** Waits until a script of the test's own returns true. */
  public Browser until(String script) {
    long end = System.nanoTime() + Duration.ofSeconds(60).toNanos();
    while (!Boolean.TRUE.equals(driver.executeScript("return !!(" + script + ")"))) {
      Assertions.assertTrue(System.nanoTime() < end, "never true: " + script);
    }
    return this;
  }

  /** From now on everything is about the page in a frame. */
  public Browser intoFrame(String css) {
    driver.switchTo().frame(shown(css));
    return this;
  }

  /** From now on everything is about the page itself again. */
  public Browser outOfFrame() {
    driver.switchTo().defaultContent();
    return this;
  }

  /** Where the browser is. */
  public String address() {
    return driver.getCurrentUrl();
  }

  /** The text that can be seen of the first element that can be seen at all; else empty. */
  public String seen(String css) {
    return driver.findElements(By.cssSelector(css)).stream()
        .filter(WebElement::isDisplayed)
        .findFirst()
        .map(e -> e.getText().replaceAll("\\s+", " ").strip())
        .orElse("");
  }

  /** The texts of all elements that can be seen. */
  public List<String> allSeen(String css) {
    return driver.findElements(By.cssSelector(css)).stream()
        .filter(WebElement::isDisplayed)
        .map(e -> e.getText().replaceAll("\\s+", " ").strip())
        .toList();
  }

  /** What a script of the test's own returns. */
  public Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** Everything that the browser complained about since the last call. */
  public List<String> complaints() {
    return driver.manage().logs().get("browser").getAll().stream()
        .map(entry -> entry.getMessage())
        .toList();
  }

  /** The addresses that the browser asked for since the last call. */
  public List<String> requests() {
    return driver.manage().logs().get("performance").getAll().stream()
        .map(entry -> entry.getMessage())
        .filter(m -> m.contains("\"Network.requestWillBeSent\""))
        .map(m -> m.replaceFirst("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"))
        .toList();
  }

  /** A picture of the screen, or of the whole page, as PNG. */
  public void picture(Path file, boolean whole) throws IOException {
    Map<String, Object> shot =
        driver.executeCdpCommand(
            "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", whole));
    Files.write(file, Base64.getDecoder().decode((String) shot.get("data")));
  }

  /** A picture of the screen at its size in CSS pixels, as PNG, for people to look at. */
  public void small(Path file) throws IOException {
    Path whole = Files.createTempFile("page", ".png");
    picture(whole, false);
    BufferedImage from = ImageIO.read(whole.toFile());
    int width = from.getWidth() / 2;
    int height = from.getHeight() / 2;
    BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = to.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    graphics.drawImage(from, 0, 0, width, height, null);
    graphics.dispose();
    ImageIO.write(to, "png", file.toFile());
    Files.delete(whole);
  }

  /** The page as it prints; sizes in inches. */
  public void print(Path file, double width, double height) throws IOException {
    Map<String, Object> pdf =
        driver.executeCdpCommand(
            "Page.printToPDF",
            Map.of("paperWidth", width, "paperHeight", height, "preferCSSPageSize", false));
    Files.write(file, Base64.getDecoder().decode((String) pdf.get("data")));
  }

  @Override
  public void close() {
    driver.quit();
    try (Stream<Path> files = Files.walk(profile)) {
      files.sorted(Comparator.reverseOrder()).forEach(f -> f.toFile().delete());
    } catch (IOException | UncheckedIOException e) {
      // The system clears its folder for temporary files; a browser may still hold one of them.
    }
  }
}
