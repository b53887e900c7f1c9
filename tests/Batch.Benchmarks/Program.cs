using BenchmarkDotNet.Running;

// Without arguments the switcher would wait for a key: run all.
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args.Length == 0 ? ["--filter", "*"] : args);
