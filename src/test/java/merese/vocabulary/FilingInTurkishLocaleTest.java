package merese.vocabulary;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class FilingInTurkishLocaleTest extends FilingTest {}
