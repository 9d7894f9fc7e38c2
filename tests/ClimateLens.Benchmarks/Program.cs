using BenchmarkDotNet.Running;
using ClimateLens.Benchmarks;

return args switch
{
    ["whole-process", .. var rest] => WholeProcess.Run(rest),
    ["import-vs-duckdb", .. var rest] => ImportVsDuckDb.Run(rest),
    ["growth", .. var rest] => ImportGrowth.Run(rest),
    ["append", .. var rest] => ImportAppend.Run(rest),
    ["generate", var folder, var rows, var step] => GeneratedNursery.Keep(folder, rows, step),
    ["scale", .. var sizes] => ScaleCost.Run(sizes),
    ["one-new-week", .. var rest] => OneNewWeek.Run(rest),
    ["generate-nursery", var folder, var houses, var weeks] => ManyHouses.Keep(folder, houses, weeks),
    ["add-week", var folder, var houses, var weeks] => ManyHouses.KeepWeek(folder, houses, weeks),
    ["generate-houses", var folder, var houses, var weeks, var step] => GeneratedNursery.KeepHouses(folder, houses, weeks, step),
    ["duckdb-copy", .. var rest] => ImportVsDuckDb.Copy(rest),
    ["risk-hours"] => RiskHoursCost.Run(),
    ["house-week"] => HouseWeekCost.Run(),
    ["site"] => SiteCost.Run(),
    ["risk-recovery", ..] => RiskRecoveryTable.Run(args[1..]),
    ["causes-recovery", ..] => CausesRecoveryTable.Run(args[1..]),
    ["outlook", ..] => OutlookTable.Run(args[1..]),
    ["pot-recovery", ..] => PotRecoveryTable.Run(args[1..]),
    ["false-alarms", ..] => FalseAlarms.Run(args[1..]),
    ["learned-rates", .. var rest] => LearnedRates.Run(rest),
    _ => RunBenchmarks(args),
};

static int RunBenchmarks(string[] args)
{
    BenchmarkSwitcher.FromAssembly(typeof(WholeProcess).Assembly).Run(args);
    return 0;
}
