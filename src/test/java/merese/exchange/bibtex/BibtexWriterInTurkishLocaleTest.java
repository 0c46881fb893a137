package merese.exchange.bibtex;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class BibtexWriterInTurkishLocaleTest extends BibtexWriterTest {}
