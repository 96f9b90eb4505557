using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Running;
using Companion.Benchmarks;
using Companion.Benchmarks.KeyToPaint;

// dotnet run -c Release --project tests/Companion.Benchmarks -- medians            our own table, in half a minute
// dotnet run -c Release --project tests/Companion.Benchmarks -- key-to-paint       a key in the panel to the painted overlay, minutes
// dotnet run -c Release --project tests/Companion.Benchmarks -- coverage           what each rung solves of the open lists, minutes
// dotnet run -c Release --project tests/Companion.Benchmarks -- explained          puzzles solved and explained a second, in a minute
// dotnet run -c Release --project tests/Companion.Benchmarks -- costs              what a deduction of each rule costs, in minutes
// dotnet run -c Release --project tests/Companion.Benchmarks -- --filter '*Scan*'  BenchmarkDotNet, in minutes
Console.WriteLine(Puzzles.Description);
if (args is ["medians"])
    Medians.Print(Console.Out);
else if (args is ["explained"])
    ExplainedSolves.Print(Console.Out);
else if (args is ["coverage"])
    Coverage.Print(Console.Out);
else if (args is ["costs"])
    Costs.Print(Console.Out);
else if (args is ["key-to-paint"])
    await PanelAndFloor.PrintAsync(Console.Out);
else
    BenchmarkSwitcher.FromAssembly(typeof(Uniqueness).Assembly).Run(args, DefaultConfig.Instance.WithArtifactsPath(".artifacts/benchmarks"));
