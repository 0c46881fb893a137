package merese.time;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class EdtfInTurkishLocaleTest extends EdtfTest {}
