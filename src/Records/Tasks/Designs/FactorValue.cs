using System.Globalization;

namespace Slantwise.Records.Tasks.Designs;

/// <summary>One value of a factor: a number in the factor's unit, or a word that the task's words explain.</summary>
/// <param name="Amount">The number; none for a word.</param>
/// <param name="Key">The word's key in camel case ("oneFoot"); empty for a number.</param>
public readonly record struct FactorValue(decimal? Amount, string Key)
{
    /// <summary>A number.</summary>
    /// <param name="amount">In the factor's unit.</param>
    public static FactorValue Of(decimal amount) => new(amount, "");

    /// <summary>A word.</summary>
    /// <param name="key">Its key.</param>
    public static FactorValue Of(string key) => new(null, key);

    /// <summary>The number with a point, or the key: as the file has it.</summary>
    public override string ToString() => Amount?.ToString(CultureInfo.InvariantCulture) ?? Key;
}
