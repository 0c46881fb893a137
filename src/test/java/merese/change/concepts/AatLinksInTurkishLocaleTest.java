package merese.change.concepts;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class AatLinksInTurkishLocaleTest extends AatLinksTest {}
