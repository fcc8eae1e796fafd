using System.Globalization;
using System.Resources;
using Slantwise.Records.Tasks;

namespace Slantwise.Paper.Words;

/// <summary>Our words on paper, in one language.</summary>
internal sealed class PaperWords(CultureInfo language)
{
    private static readonly ResourceManager Texts = new(typeof(PaperWords));

    public string this[string key] =>
        Texts.GetString(key, language) ?? throw new InvalidOperationException($"No words on paper for '{key}'.");

    public string Of(string key, params object[] arguments) => string.Format(language, this[key], arguments);

    public string Date(DateOnly day) => day.ToString(this["DateFormat"], language);

    /// <summary>A dose as a pupil reads it.</summary>
    /// <exception cref="InvalidOperationException">A kind of dose without words.</exception>
    public string Dose(Dose dose) => dose.Kind switch
    {
        DoseKind.HoldS => Of(dose.Amount == 1 ? "DoseHoldOne" : "DoseHold", dose.Amount.ToString("0.##", language)),
        DoseKind.RepetitionsCount => Of(dose.Amount == 1 ? "DoseRepetitionsOne" : "DoseRepetitions", dose.Amount.ToString("0.##", language)),
        DoseKind.DistanceM => Of("DoseDistance", Length(dose.Amount)),
        DoseKind.HeightM => Of("DoseHeight", Length(dose.Amount)),
        DoseKind.TargetSizeM => Of("DoseTarget", Length(dose.Amount)),
        _ => throw new InvalidOperationException($"No words on paper for the dose '{dose.Kind}'."),
    };

    // Children measure what is shorter than a metre in centimetres.
    private string Length(decimal metres) =>
        metres < 1 ? Of("Centimetres", (metres * 100).ToString("0.#", language)) : Of("Metres", metres.ToString("0.##", language));
}
