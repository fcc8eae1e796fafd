using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Slantwise.Bench.Reading;

// In this process, as the other benchmarks: the project's name and the assembly's differ.
BenchmarkRunner.Run<OnePage>(DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance)), args);
