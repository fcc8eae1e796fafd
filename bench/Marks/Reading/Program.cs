using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Slantwise.Bench.Reading;

// In this process, as the other benchmarks: the project's name and the assembly's differ. Warm long enough for the compiler to have done its best.
BenchmarkRunner.Run<OnePage>(DefaultConfig.Instance.AddJob(Job.ShortRun.WithWarmupCount(20).WithIterationCount(10).WithToolchain(InProcessEmitToolchain.Instance)), args);
