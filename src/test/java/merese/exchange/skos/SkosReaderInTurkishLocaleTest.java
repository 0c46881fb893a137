package merese.exchange.skos;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class SkosReaderInTurkishLocaleTest extends SkosReaderTest {}
