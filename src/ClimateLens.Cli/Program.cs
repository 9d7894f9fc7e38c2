using System.Text;
using ClimateLens.Cli;

// LF on every platform, so that a scheduler's log and a test read the same bytes.
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
Console.Out.NewLine = "\n";
Console.Error.NewLine = "\n";
return CommandLine.Invoke(args, Console.Out, Console.Error);
