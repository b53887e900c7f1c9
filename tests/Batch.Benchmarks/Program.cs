using Batch.Benchmarks;
using BenchmarkDotNet.Running;

// Without arguments the switcher would wait for a key: run all.
if (args is ["race"]) PaperRace.Run();
else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args.Length == 0 ? ["--filter", "*"] : args);
