package merese.vocabulary;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class PhraseMatchInTurkishLocaleTest extends PhraseMatchTest {}
