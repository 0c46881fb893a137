package merese.exchange.identifier;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class IdentifiersInTurkishLocaleTest extends IdentifiersTest {}
