package merese.vocabulary;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class ThesaurusInTurkishLocaleTest extends ThesaurusTest {}
