package merese.vocabulary;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class MisreadWordsInTurkishLocaleTest extends MisreadWordsTest {}
