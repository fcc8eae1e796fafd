using System.CommandLine;
using System.Globalization;
using Slantwise.Host.Answers;
using Slantwise.Host.Words;
using Slantwise.Paper;

namespace Slantwise.Host.Printing;

/// <summary>The options of <c>sheet print</c> that say how to print.</summary>
internal sealed class PaperFlags
{
    private const int MostSpareCount = 60;
    private const int MostSpareNumber = 9999;

    private readonly Option<string> _size = new("--size") { Description = HostWords.Say("OptionSize"), DefaultValueFactory = _ => "a4" };
    private readonly Option<string?> _language = new("--lang") { Description = HostWords.Say("OptionLang") };
    private readonly Option<int> _spare = new("--spare") { Description = HostWords.Say("OptionSpare"), HelpName = "N" };
    private readonly Option<int> _spareFrom = new("--spare-from") { Description = HostWords.Say("OptionSpareFrom"), HelpName = "N", DefaultValueFactory = _ => 1 };
    private readonly Option<bool> _twoSided = new("--two-sided") { Description = HostWords.Say("OptionTwoSided") };
    private readonly Option<bool> _twoUp = new("--two-up") { Description = HostWords.Say("OptionTwoUp") };
    private readonly Option<bool> _large = new("--large-print") { Description = HostWords.Say("OptionLargePrint") };
    private readonly Option<bool> _wide = new("--wide-spacing") { Description = HostWords.Say("OptionWideSpacing") };
    private readonly Option<bool> _signs = new("--signs") { Description = HostWords.Say("OptionSigns") };
    private readonly Option<string> _cards = new("--cards") { Description = HostWords.Say("OptionCards"), DefaultValueFactory = _ => "half" };
    private readonly Option<string> _poster = new("--poster-size") { Description = HostWords.Say("OptionPosterSize"), DefaultValueFactory = _ => "one" };
    private readonly Option<bool> _names = new("--name-others") { Description = HostWords.Say("OptionNameOthers") };
    private readonly Option<bool> _cream = new("--cream") { Description = HostWords.Say("OptionCream") };

    public PaperFlags()
    {
        _size.AcceptOnlyFromAmong(StringComparer.OrdinalIgnoreCase, "a4", "letter");
        _language.AcceptOnlyFromAmong("en", "es");
        _cards.AcceptOnlyFromAmong([.. PaperQuery.CardSizes.Keys]);
        _poster.AcceptOnlyFromAmong([.. PaperQuery.PosterSizes.Keys]);
    }

    /// <summary>Adds them to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in (Option[])[_size, _language, _spare, _spareFrom, _twoSided, _twoUp, _large, _wide, _signs, _cream, _cards, _poster, _names]) command.Add(option);
    }

    /// <summary>What they say; refused where two exclude each other or a number is out of range.</summary>
    public PaperOptions Of(ParseResult parsed)
    {
        if (parsed.GetValue(_spare) is < 0 or > MostSpareCount) throw Refusal.Of("SpareRange", parsed.GetValue(_spare));
        if (parsed.GetValue(_spareFrom) is < 1 or > MostSpareNumber) throw Refusal.Of("SpareFromRange", parsed.GetValue(_spareFrom));
        if (parsed.GetValue(_twoUp) && parsed.GetValue(_large)) throw Refusal.Of("TwoUpLarge");
        var language = parsed.GetValue(_language) is { } asked ? CultureInfo.GetCultureInfo(asked) : CultureInfo.CurrentUICulture;
        return new PaperOptions(Enum.Parse<PaperSize>(parsed.GetValue(_size)!, ignoreCase: true), language)
        {
            SpareCount = parsed.GetValue(_spare),
            FirstSpareNumber = parsed.GetValue(_spareFrom),
            IsTwoSided = parsed.GetValue(_twoSided),
            IsTwoUp = parsed.GetValue(_twoUp),
            IsLargePrint = parsed.GetValue(_large),
            HasWideSpacing = parsed.GetValue(_wide),
            HasSigns = parsed.GetValue(_signs),
            IsCream = parsed.GetValue(_cream),
            CardSize = PaperQuery.CardSizes[parsed.GetValue(_cards)!],
            PosterSize = PaperQuery.PosterSizes[parsed.GetValue(_poster)!],
            NamesOtherLevels = parsed.GetValue(_names),
        };
    }
}
