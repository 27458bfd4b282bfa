//go:build !unix

package fleet

import "os"

const openFlags = os.O_RDONLY
