package merese.exchange.csv;  public final class CsvReader implements merese.exchange.RecordReader { public void read(String f, java.io.InputStream in, merese.exchange.Receiver to){} }
