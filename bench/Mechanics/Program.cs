using BenchmarkDotNet.Running;
using Slantwise.Bench.Mechanics;

BenchmarkRunner.Run<WholeAnswers>(args: args);
