using BenchmarkDotNet.Running;
using ClimateLens.Benchmarks;

return args switch
{
    ["whole-process", ..] => WholeProcess.Run(args[1..]),
    ["false-alarms", ..] => FalseAlarms.Run(args[1..]),
    _ => RunBenchmarks(args),
};

static int RunBenchmarks(string[] args)
{
    BenchmarkSwitcher.FromAssembly(typeof(WholeProcess).Assembly).Run(args);
    return 0;
}
