package merese.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.Closeable;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real browser without a window: Debian's chromium and chromium-driver. */
final class Browser implements Closeable {
  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private static final Path PICTURES = Path.of("target/desk");

  private final ChromeDriver driver;
  private final String address;
  private final Path downloads;

  private Browser(ChromeDriver driver, String address, Path downloads) {
    this.driver = driver;
    this.address = address;
    this.downloads = downloads;
  }

  /**
   * Opens it; the test is skipped where there is none.
   *
   * @param downloads where files are saved
   */
  static Browser open(RunningDesk desk, Path downloads) {
    Optional<Path> browser = installed("chromium");
    Optional<Path> control = installed("chromedriver");
    assumeTrue(
        browser.isPresent() && control.isPresent(),
        "no chromium; .ci/run installs it and its driver");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(browser.get().toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--force-device-scale-factor=1",
        "--hide-scrollbars");
    options.setExperimentalOption(
        "prefs", Map.of("download.default_directory", downloads.toAbsolutePath().toString()));
    options.setCapability("goog:loggingPrefs", Map.of(LogType.BROWSER, "ALL"));
    ChromeDriverService service =
        new ChromeDriverService.Builder().usingDriverExecutable(control.get().toFile()).build();
    return new Browser(new ChromeDriver(service, options), desk.address(), downloads);
  }

  private static Optional<Path> installed(String program) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .map(folder -> Path.of(folder, program))
        .filter(Files::isExecutable)
        .findFirst();
  }

  ChromeDriver driver() {
    return driver;
  }

  /** The folder into which files are saved. */
  Path downloads() {
    return downloads;
  }

  /**
   * @param path from the first slash
   */
  void go(String path) {
    driver.get(address + path.substring(1));
  }

  /** The address of the page, from the first slash. */
  String at() {
    return driver.getCurrentUrl().substring(address.length() - 1);
  }

  /** Waits until there is one, and that it can be seen. */
  WebElement find(String css) {
    return await(
        css,
        () ->
            driver.findElements(By.cssSelector(css)).stream()
                .filter(WebElement::isDisplayed)
                .findFirst()
                .orElse(null));
  }

  List<WebElement> all(String css) {
    return driver.findElements(By.cssSelector(css));
  }

  List<String> texts(String css) {
    return all(css).stream().map(WebElement::getText).toList();
  }

  /** Types at where the cursor is. */
  void type(CharSequence... keys) {
    driver.switchTo().activeElement().sendKeys(keys);
  }

  void enter(String text) {
    type(text, Keys.ENTER);
  }

  /** Waits for something that comes by itself; null is not yet. */
  <T> T await(String what, java.util.function.Supplier<T> found) {
    return new WebDriverWait(driver, PATIENCE)
        .withMessage(() -> what + " at " + driver.getCurrentUrl())
        .ignoring(org.openqa.selenium.StaleElementReferenceException.class)
        .until(d -> found.get());
  }

  void awaitTrue(String what, java.util.function.BooleanSupplier holds) {
    await(what, () -> holds.getAsBoolean() ? Boolean.TRUE : null);
  }

  void size(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  void dark(boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
  }

  /** Keeps a picture of the whole page as target/desk/NAME.png. */
  void picture(String name) throws IOException {
    Files.createDirectories(PICTURES);
    Map<String, Object> taken =
        driver.executeCdpCommand(
            "Page.captureScreenshot", Map.of("captureBeyondViewport", true, "format", "png"));
    Files.write(
        PICTURES.resolve(name + ".png"), Base64.getDecoder().decode((String) taken.get("data")));
  }

  /** What sticks out of the window at its right, so that the page must be pushed sideways. */
  List<String> stickingOut() {
    Object found =
        driver.executeScript(
            """
            const wide = document.documentElement.clientWidth;
            if (document.documentElement.scrollWidth <= wide) return [];
            const held = e => {
              for (let p = e.parentElement; p; p = p.parentElement) {
                if (['auto', 'scroll', 'hidden'].includes(getComputedStyle(p).overflowX)) return true;
              }
              return false;
            };
            const out = [...document.body.querySelectorAll('*')]
              .filter(e => e.getBoundingClientRect().right > wide + 1);
            const free = out.filter(e => !held(e));
            return (free.length > 0 ? free : out)
              .map(e => e.outerHTML.slice(0, 160)).slice(0, 5);
            """);
    List<String> lines = new ArrayList<>();
    ((List<?>) found).forEach(each -> lines.add(String.valueOf(each)));
    return lines;
  }

  /** What axe-core 4.10 finds wrong by WCAG 2.2 A and AA and by its best practices, a line each. */
  List<String> accessibilityFaults() throws IOException {
    try (InputStream script = Browser.class.getResourceAsStream("/axe.min.js")) {
      driver.executeScript(new String(script.readAllBytes(), StandardCharsets.UTF_8));
    }
    driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
    Object found =
        driver.executeAsyncScript(
            "const done = arguments[arguments.length - 1];"
                + "axe.run().then(r => done(r.violations.flatMap(v => v.nodes.map(n =>"
                + " v.id + ': ' + n.target.join(' ') + ': ' + n.failureSummary))));");
    List<String> faults = new ArrayList<>();
    for (Object fault : (List<?>) found) {
      faults.add(String.valueOf(fault).replace('\n', ' '));
    }
    return faults;
  }

  /** What the browser complained of since it was asked last: refused scripts, missing files. */
  List<String> complaints() {
    List<String> lines = new ArrayList<>();
    for (LogEntry entry : driver.manage().logs().get(LogType.BROWSER)) {
      lines.add(entry.getMessage());
    }
    return lines;
  }

  void assertNoComplaints() {
    assertEquals(List.of(), complaints());
  }

  @Override
  public void close() {
    driver.quit();
  }
}
