package merese.benchmark;

/** The smallest program that a user could wait for. */
final class Hello {
  private Hello() {}

  public static void main(String[] args) {
    System.out.println("hello");
  }
}
