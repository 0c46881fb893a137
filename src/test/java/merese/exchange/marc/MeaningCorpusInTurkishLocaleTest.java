package merese.exchange.marc;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class MeaningCorpusInTurkishLocaleTest extends MeaningCorpusTest {}
