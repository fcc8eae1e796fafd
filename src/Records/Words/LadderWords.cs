using System.Globalization;
using System.Resources;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Words;

/// <summary>The words that levels proposed from a grid are named with.</summary>
public static class LadderWords
{
    private static readonly ResourceManager Texts = new(typeof(LadderWords));

    /// <summary>A demand on the body.</summary>
    /// <param name="demand">Any demand.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Of(BodyDemand demand, CultureInfo culture) => Text($"Demand{demand}", culture);

    /// <summary>A value with its unit: "0.4 m", "90°", "a bench".</summary>
    /// <param name="factor">The factor.</param>
    /// <param name="value">One of its values.</param>
    /// <param name="words">The task's words.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Of(TaskFactor factor, FactorValue value, TaskWords words, CultureInfo culture)
    {
        var said = TaskTerms.Of(factor, value, words, culture);
        return value.Amount is null ? said : string.Format(culture, Text($"Value{UnitOf(factor)}", culture), said);
    }

    /// <summary>A number as part of a level's name: "width 0.4 m".</summary>
    /// <param name="name">What the factor is called.</param>
    /// <param name="value">The value with its unit.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Named(string name, string value, CultureInfo culture) => string.Format(culture, Text("Named", culture), name, value);

    private static FactorUnit UnitOf(TaskFactor factor) => factor.Unit ?? factor.Dose switch
    {
        DoseKind.HoldS => FactorUnit.S,
        DoseKind.RepetitionsCount => FactorUnit.Count,
        _ => FactorUnit.M,
    };

    private static string Text(string key, CultureInfo culture) =>
        Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No words for '{key}' in the ladder words.");
}
