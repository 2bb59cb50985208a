package afterweld.thermal;

class ShellReferenceTest {}
