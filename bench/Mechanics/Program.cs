using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Slantwise.Bench.Mechanics;

// In this process: the project's name and the assembly's differ, which the usual way of starting one more process does not take.
BenchmarkRunner.Run<WholeAnswers>(DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance)), args);
