namespace Slantwise.Records.Tasks.Designs;

/// <summary>A way to change a task so that it fits somebody.</summary>
/// <param name="Step">What is changed.</param>
/// <param name="Need">What it starts from, in words of function.</param>
/// <param name="Change">What to do, one sentence for the teacher.</param>
public sealed record Adaptation(StepLetter Step, FunctionNeed Need, string Change);
