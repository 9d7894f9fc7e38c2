using ClimateLens.Cli;
using ClimateLens.Cli.Output;

// LF on every platform, so that a scheduler's log and a test read the same bytes.
return CommandLine.Invoke(args, StandardStream.Open(1, () => Console.Out), StandardStream.Open(2, () => Console.Error));
