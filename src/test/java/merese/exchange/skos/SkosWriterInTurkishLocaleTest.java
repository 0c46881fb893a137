package merese.exchange.skos;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class SkosWriterInTurkishLocaleTest extends SkosWriterTest {}
