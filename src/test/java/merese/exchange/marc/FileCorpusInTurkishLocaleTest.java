package merese.exchange.marc;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class FileCorpusInTurkishLocaleTest extends FileCorpusTest {}
