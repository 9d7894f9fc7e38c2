using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("ClimateLens.Analysis.Tests")]
