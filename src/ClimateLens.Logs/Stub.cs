namespace ClimateLens.Logs;

internal static class Stub;
