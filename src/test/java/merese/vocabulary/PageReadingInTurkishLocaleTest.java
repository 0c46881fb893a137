package merese.vocabulary;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class PageReadingInTurkishLocaleTest extends PageReadingTest {}
