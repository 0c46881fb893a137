package merese.benchmark;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import merese.answer.CoverageQuestion;
import merese.answer.Covers;
import merese.desk.RunningDesk;
import merese.shelf.Shelf;
import org.jsoup.nodes.Element;

/**
 * The desk over 5,000 works and 100,000 notes on loopback: answers under sixteen readers at once
 * beside the same questions asked in the process by one alone, suggestions while somebody types,
 * and what the first page sends.
 */
final class DeskBenchmark implements Benchmark {
  private static final int WORKS = 5_000;
  private static final int NOTES = 100_000;
  private static final int READERS = 16;
  private static final int QUESTIONS_EACH = 40;
  private static final double FRAME = 16;
  private static final int FIRST_PAGE = 100_000;
  private static final List<String> TYPED =
      List.of("bladed ring", "annulated", "target stopper", "folded foot", "knife-edged rings");

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  @Override
  public void run(Report report) throws Exception {
    try (LargeLibrary large = LargeLibrary.indexed(WORKS, NOTES);
        RunningDesk desk = RunningDesk.on(large.library())) {
      List<String> concepts = large.concepts();
      for (String concept : concepts) {
        get(desk, "/?concept=" + concept); // Java warms up
      }
      double[] alone = alone(large, concepts);
      double[] served = served(desk, concepts);
      for (int percent : new int[] {50, 99}) {
        report.beside(
            "desk, 16 readers at once, 100,000 notes, p"
                + percent
                + ", against one alone in the process",
            Report.percentile(served, percent),
            Report.percentile(alone, percent),
            "ms");
      }
      double[] typed = typed(desk);
      report.ratio(
          "desk: a suggestion, p99, against a frame of typing",
          Report.percentile(typed, 99),
          FRAME,
          "ms",
          1);
      report.ratio(
          "desk: the first page and all it loads, packed, against 100 kB",
          firstPage(desk) / 1000.0,
          FIRST_PAGE / 1000.0,
          "kB",
          1);
    }
  }

  private double[] alone(LargeLibrary large, List<String> concepts) {
    double[] times = new double[READERS * QUESTIONS_EACH];
    Random random = new Random(7);
    try (Shelf shelf = large.open()) {
      for (String concept : concepts) {
        Covers.answer(
            shelf, CoverageQuestion.ofConcept(concept).with(CoverageQuestion.Showing.USUAL));
      }
      for (int i = 0; i < times.length; i++) {
        String concept = concepts.get(random.nextInt(concepts.size()));
        long before = System.nanoTime();
        shelf.ask(
            s ->
                Covers.answer(
                    s, CoverageQuestion.ofConcept(concept).with(CoverageQuestion.Showing.USUAL)));
        times[i] = (System.nanoTime() - before) / 1e6;
      }
    }
    return times;
  }

  private double[] served(RunningDesk desk, List<String> concepts) throws Exception {
    ExecutorService readers = Executors.newFixedThreadPool(READERS);
    try {
      List<Future<double[]>> all = new ArrayList<>();
      for (int reader = 0; reader < READERS; reader++) {
        Random random = new Random(reader);
        all.add(
            readers.submit(
                () -> {
                  double[] times = new double[QUESTIONS_EACH];
                  for (int i = 0; i < times.length; i++) {
                    String concept = concepts.get(random.nextInt(concepts.size()));
                    long before = System.nanoTime();
                    get(desk, "/?concept=" + concept);
                    times[i] = (System.nanoTime() - before) / 1e6;
                  }
                  return times;
                }));
      }
      double[] times = new double[READERS * QUESTIONS_EACH];
      for (int reader = 0; reader < READERS; reader++) {
        System.arraycopy(all.get(reader).get(), 0, times, reader * QUESTIONS_EACH, QUESTIONS_EACH);
      }
      return times;
    } finally {
      readers.shutdown();
    }
  }

  private double[] typed(RunningDesk desk) throws Exception {
    List<Double> times = new ArrayList<>();
    for (int round = 0; round < 10; round++) {
      for (String words : TYPED) {
        for (int end = 1; end <= words.length(); end++) {
          String path = "/suggest?term=" + RunningDesk.encoded(words.substring(0, end));
          long before = System.nanoTime();
          get(desk, path);
          if (round > 0) {
            times.add((System.nanoTime() - before) / 1e6);
          }
        }
      }
    }
    return times.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private long firstPage(RunningDesk desk) throws Exception {
    long bytes = sent(desk, "/");
    for (Element each : desk.get("/").page().select("link[href], script[src]")) {
      bytes += sent(desk, each.hasAttr("href") ? each.attr("href") : each.attr("src"));
    }
    return bytes;
  }

  private long sent(RunningDesk desk, String path) throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(desk.uri(path)).header("Accept-Encoding", "gzip").build();
    return client.send(request, BodyHandlers.ofByteArray()).body().length;
  }

  private void get(RunningDesk desk, String path) throws IOException, InterruptedException {
    HttpResponse<byte[]> answer =
        client.send(HttpRequest.newBuilder(desk.uri(path)).build(), BodyHandlers.ofByteArray());
    if (answer.statusCode() != 200) {
      throw new IOException(path + " gave " + answer.statusCode());
    }
  }
}
