using Slantwise.Records.Checks;

namespace Slantwise.Records.Tasks.Checks;

/// <summary>Collects findings about parts of one file.</summary>
/// <param name="findings">Where they go.</param>
/// <param name="file">The file.</param>
/// <param name="prefix">What leads a part's place in it.</param>
internal sealed class PartFindings(List<Finding> findings, string file, string prefix = "")
{
    /// <summary>Points out: the task can be used, but not as it is in the library.</summary>
    public void Flag(string key, string part, params object[] arguments) => findings.Add(Finding.Flagged(key, [file, prefix + part, .. arguments]));

    /// <summary>Refuses: the task contradicts itself.</summary>
    public void Refuse(string key, string part, params object[] arguments) => findings.Add(Finding.Refused(key, [file, prefix + part, .. arguments]));
}
