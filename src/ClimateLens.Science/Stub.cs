namespace ClimateLens.Science;

internal static class Stub;
