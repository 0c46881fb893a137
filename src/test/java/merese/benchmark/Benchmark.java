package merese.benchmark;

/** One comparison. It measures both sides itself, in turn, and never fails for being slow. */
interface Benchmark {
  void run(Report report) throws Exception;
}
