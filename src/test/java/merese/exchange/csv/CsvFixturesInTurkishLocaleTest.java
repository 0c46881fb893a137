package merese.exchange.csv;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class CsvFixturesInTurkishLocaleTest extends CsvFixturesTest {}
