namespace Slantwise.Records.Floor.Contracts;

/// <summary>The tasks of a bundle in another language, as far as the library knows them word for word.</summary>
/// <param name="Language">Two letters.</param>
/// <param name="Tasks">The same tasks with the same ids; a task that is the school's own stays as it is and is not among them.</param>
/// <param name="FigureDescriptions">The figures' words in that language, by figure key.</param>
public sealed record BundleTranslation(string Language, IReadOnlyList<BundleTask> Tasks, IReadOnlyDictionary<string, string> FigureDescriptions);
