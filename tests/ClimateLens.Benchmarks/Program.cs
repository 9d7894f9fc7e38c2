using BenchmarkDotNet.Running;
using ClimateLens.Benchmarks;

return args is ["whole-process", ..] ? WholeProcess.Run(args[1..]) : RunBenchmarks(args);

static int RunBenchmarks(string[] args)
{
    BenchmarkSwitcher.FromAssembly(typeof(WholeProcess).Assembly).Run(args);
    return 0;
}
