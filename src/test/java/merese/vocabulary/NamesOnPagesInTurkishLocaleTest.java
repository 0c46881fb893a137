package merese.vocabulary;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class NamesOnPagesInTurkishLocaleTest extends NamesOnPagesTest {}
