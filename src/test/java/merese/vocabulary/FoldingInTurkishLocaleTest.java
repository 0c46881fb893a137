package merese.vocabulary;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class FoldingInTurkishLocaleTest extends FoldingTest {}
