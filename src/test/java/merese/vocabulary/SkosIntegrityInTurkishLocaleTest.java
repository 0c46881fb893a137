package merese.vocabulary;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class SkosIntegrityInTurkishLocaleTest extends SkosIntegrityTest {}
