package merese.change.concepts;

import merese.testing.InTurkishLocale;

@InTurkishLocale
class ConceptImportInTurkishLocaleTest extends ConceptImportTest {}
