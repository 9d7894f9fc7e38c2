using System.Globalization;
using ClimateLens.HouseSimulator;

const string Usage = "Usage: dotnet run --project tests/ClimateLens.HouseSimulator -- [--seed N] [--out DIR] [--summary]";
ulong seed = SampleNursery.DefaultSeed;
string folder = "sample-logs";
bool summary = false;
for (int i = 0; i < args.Length; i++)
{
    switch (args[i])
    {
        case "--summary":
            summary = true;
            break;
        case "--seed" when i + 1 < args.Length && ulong.TryParse(args[i + 1], NumberStyles.None, CultureInfo.InvariantCulture, out seed):
        case "--out" when i + 1 < args.Length:
            folder = args[i] == "--out" ? args[i + 1] : folder;
            i++;
            break;
        default:
            await Console.Error.WriteLineAsync(Usage);
            return 64;
    }
}

NurseryRun run = NurseryRun.Of(seed);
if (summary)
{
    Console.Write(Summary.Of(run));
    return 0;
}

SampleNursery.Make(run).Write(folder);
Console.WriteLine(FormattableString.Invariant($"Wrote the sample logs of seed {seed} to {folder}."));
return 0;
