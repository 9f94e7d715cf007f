package browser

import (
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/stretchr/testify/require"
)

// The browser itself finds nothing that keeps the hosted page from being put on
// a home screen, and reads its manifest without a complaint.
func TestInstallable(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.until(`navigator.serviceWorker.ready.then(() => true)`)
	manifest := command(tab, page.GetAppManifest, page.GetAppManifestParams{})
	require.Empty(t, manifest.Errors)
	require.Contains(t, manifest.Data, `"standalone"`)
	var reasons []string
	for _, e := range command(tab, page.GetInstallabilityErrors, cdp.Empty{}).InstallabilityErrors {
		if e.ErrorID != "in-incognito" { // a storage of its own is all that a test's page has
			reasons = append(reasons, e.ErrorID)
		}
	}
	require.Empty(t, reasons)
}
