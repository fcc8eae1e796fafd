using System.CommandLine;

namespace Slantwise.Host.Studies;

/// <summary>How often ranges hold what they are about.</summary>
internal sealed class ConfidenceOption : Option<double>
{
    public ConfidenceOption()
        : base("--confidence") => (Description, HelpName, DefaultValueFactory) = (StudyWords.Say("OptionConfidence"), "SHARE", _ => 0.95);

    /// <summary>The one asked for.</summary>
    public double Of(ParseResult parsed) =>
        parsed.GetValue(this) is >= 0.5 and <= 0.999 and var asked ? asked : throw StudyRefusal.Of("OptionRange", Name, parsed.GetValue(this), 0.5, 0.999);
}
