namespace ClimateLens.Reports;

internal static class Stub;
