package merese.exchange.csl;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class CslFixturesInTurkishLocaleTest extends CslFixturesTest {}
