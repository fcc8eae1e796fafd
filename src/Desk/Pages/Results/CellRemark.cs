using System.Globalization;
using Slantwise.Desk.Words;

namespace Slantwise.Desk.Pages.Results;

/// <summary>Why a text stays in its cell unsaved: what is wrong and what is allowed. Its words are in the resources.</summary>
/// <param name="Key">The name of its sentence in <c>Words/ResultsWords.resx</c>.</param>
/// <param name="Arguments">What the sentence's gaps are filled with, in order.</param>
public sealed record CellRemark(string Key, params object[] Arguments)
{
    /// <summary>The remark as a sentence.</summary>
    /// <param name="language">The page's language.</param>
    public string Sentence(CultureInfo language) => ResultsWords.Text(Key, language, Arguments);
}
